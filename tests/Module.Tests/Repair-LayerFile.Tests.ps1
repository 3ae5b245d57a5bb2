BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
}

Describe 'Repair-LayerFile' {
    BeforeEach {
        $hero = Copy-Fixture groups-nested (Join-Path $TestDrive "$([guid]::NewGuid())/hero.psd")
        $file = Get-LayerFile $hero
    }

    It 'passes files on with pending repairs' {
        $result = $file | Repair-LayerFile -Rule NoCenterGuide
        $result | Should -Be $file
        $file.PendingCount | Should -Be 1
        $file.Guides.Position | Should -Be $file.Axis
        $file.Changes[0].Property | Should -Be Guide
    }

    It 'saves what it repaired' {
        $file | Repair-LayerFile -Rule NoCenterGuide | Save-LayerFile -InPlace > $null
        Test-LayerFile $hero -Rule NoCenterGuide | Should -BeNullOrEmpty
    }

    It 'changes nothing the second time' {
        $file | Repair-LayerFile | Repair-LayerFile > $null
        $count = $file.PendingCount
        $file | Repair-LayerFile > $null
        $file.PendingCount | Should -Be $count
    }

    It 'shows what it would do with -WhatIf' {
        $file | Repair-LayerFile -WhatIf | Should -Be $file
        $file.PendingCount | Should -Be 0
    }

    It 'passes layers on and repairs their file' {
        $layers = Get-Layer $hero
        ($layers | Repair-LayerFile -Rule NoCenterGuide).Count | Should -Be $layers.Count
        $layers[0].GetFile().PendingCount | Should -Be 1
    }

    It 'refuses a rule whose findings need a person' {
        $failure = { $file | Repair-LayerFile -Rule OddCanvasWidth } | Should -Throw -ErrorId 'RuleNotRepairable,*' -PassThru
        $failure.Exception.Message | Should -BeLike '*NoCenterGuide*'
        { $file | Repair-LayerFile -Rule Nonsense } | Should -Throw -ErrorId 'RuleNotFound,*'
    }

    It 'leaves rules out' {
        $file | Repair-LayerFile -ExcludeRule * > $null
        $file.PendingCount | Should -Be 0
    }

    It 'completes only rules that it can put right' {
        (TabExpansion2 'Repair-LayerFile -Rule ' 23).CompletionMatches.CompletionText | Should -Contain 'GuideOffAxis'
        (TabExpansion2 'Repair-LayerFile -Rule ' 23).CompletionMatches.CompletionText | Should -Not -Contain 'OddCanvasWidth'
    }

    It 'refuses a path in words that help' {
        { 'hero.psd' | Repair-LayerFile -ErrorAction Stop } | Should -Throw -ErrorId 'NotALayer,*'
    }
}
