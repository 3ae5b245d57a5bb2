BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
    Push-Location -LiteralPath $TestDrive
    '{ "name": "bare" }' | Set-Content bare.layerprofile.json
    '{ "name": "bracket" }' | Set-Content -LiteralPath 'a[1].layerprofile.json'
    '{ "name": "note" }' | Set-Content note.json
}

AfterAll { Pop-Location }

Describe 'Get-LayerProfile' {
    It 'lists what ships, the default first' {
        (Get-LayerProfile).Name | Should -Be 'figure', 'figure-ja'
    }

    It 'takes names, whatever their case, and wildcards' {
        (Get-LayerProfile FIGURE).Name | Should -Be 'figure'
        (Get-LayerProfile 'figure-*').Name | Should -Be 'figure-ja'
        (Get-LayerProfile 'none*') | Should -BeNullOrEmpty
    }

    It 'reads files by path, by wildcard and from the pipeline' {
        $profile = Get-LayerProfile ./bare.layerprofile.json
        $profile.Name | Should -Be 'bare'
        $profile.Path | Should -Be (Join-Path $TestDrive 'bare.layerprofile.json')
        (Get-LayerProfile *).Name | Sort-Object | Should -Be 'bare', 'bracket', 'figure', 'figure-ja'
        (Get-Item -LiteralPath 'a[1].layerprofile.json' | Get-LayerProfile).Name | Should -Be 'bracket'
        ('bare.layerprofile.json' | Get-LayerProfile).Name | Should -Be 'bare'
    }

    It 'tells path, line and column of an error, and goes on' {
        "{ ""name"": ""wide"",`n  ""canvas"": { ""widht"": 1 } }" | Set-Content wrong.layerprofile.json
        $result = Get-Streams { Get-LayerProfile wrong.layerprofile.json, figure }
        $result.Output.Name | Should -Be 'figure'
        $result.Errors.Count | Should -Be 1
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'BadProfile,*'
        "$($result.Errors[0])" | Should -BeLike "*wrong.layerprofile.json: $.canvas.widht, line 2, column 15: There is no property 'widht' here. Write 'width'*"
        Remove-Item wrong.layerprofile.json
    }

    It 'refuses what is no profile: <Id>' -ForEach @(
        @{ Id = 'ProfileNotFound'; Value = 'nobody' }
        @{ Id = 'NotAProfile'; Value = 42 }
        @{ Id = 'NotAFilePath'; Value = 'env:PATH' }
    ) {
        $result = Get-Streams { Get-LayerProfile $Value }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike "$Id,*"
    }

    It 'shows itself in a table without dots at the ends' {
        $text = Get-LayerProfile | Out-String -Width 120
        $text | Should -Match 'figure +5000 x 6000 +600 +Upper arm L'
        $text | Should -Match "figure-ja +5000 x 6000 +600 +左.*viewer's"
    }

    It 'is completed by the shipped names, then by files' {
        $line = 'Get-LayerProfile '
        $found = [System.Management.Automation.CommandCompletion]::CompleteInput($line, $line.Length, $null).CompletionMatches.ListItemText
        $found | Should -Be 'figure', 'figure-ja', 'a[1].layerprofile.json', 'bare.layerprofile.json'
    }

    It 'serves -Profile of other commands: <What>' -ForEach @(
        @{ What = 'a name'; Value = { 'figure-ja' } }
        @{ What = 'a path'; Value = { '.\bare.layerprofile.json' } }
        @{ What = 'a file'; Value = { Get-Item bare.layerprofile.json } }
        @{ What = 'a profile'; Value = { Get-LayerProfile figure } }
    ) {
        Copy-Fixture groups-nested "$TestDrive/hero.psd" > $null
        { Get-LayerFile hero.psd | Test-LayerFile -Profile (& $Value) -ErrorAction Stop } | Should -Not -Throw
    }

    It 'says what is wrong with -Profile of other commands' {
        Copy-Fixture groups-nested "$TestDrive/hero.psd" > $null
        { Test-LayerFile hero.psd -Profile nobody } | Should -Throw "*'figure' and 'figure-ja' ship with the module*"
        '{ "name": 3 }' | Set-Content wrong.layerprofile.json
        { Test-LayerFile hero.psd -Profile wrong.layerprofile.json } | Should -Throw '*$.name, line 1, column 11*'
        Remove-Item wrong.layerprofile.json
    }
}
