BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Set-LayerOrder' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd'))
        $leaves = @($file | Get-Layer -Leaf)
        # Two parts at the front of the file, the wrong way round.
        $pair = $leaves[0..1]
        $pair[0] | Rename-Layer -NewName 'Back hair' > $null
        $pair[1] | Rename-Layer -NewName 'Neck' > $null
        $pair | Move-Layer -Before 1 > $null
        function Get-Outermost { ($file.GetChildren() | Select-Object -First 2).Name -join ', ' }
    }

    It 'puts the back of the hair behind the neck and tells so' {
        Get-Outermost | Should -Be 'Back hair, Neck'
        $file | Set-LayerOrder -Profile figure > $null
        $names = $file.GetChildren().Name
        $names.IndexOf('Neck') | Should -BeLessThan $names.IndexOf('Back hair')
        $file.Changes[-1].Property | Should -Be 'Place'
        $file.Changes[-1].New | Should -BeLike '*place*behind*'
        ($file | Set-LayerOrder).Changes.Count | Should -Be $file.Changes.Count
    }

    It 'changes nothing with -WhatIf' {
        $pending = $file.PendingCount
        ($file | Set-LayerOrder -WhatIf).PendingCount | Should -Be $pending
        Get-Outermost | Should -Be 'Back hair, Neck'
    }

    It 'passes layers on as they came' {
        $passed = $file | Get-Layer | Set-LayerOrder
        $passed.Count | Should -Be $file.LayerCount
    }

    It 'offers the profiles' {
        $line = '$file | Set-LayerOrder -Profile fig'
        (TabExpansion2 $line $line.Length).CompletionMatches.CompletionText | Should -Contain 'figure'
    }

    It 'says when a profile does not exist' {
        { $file | Set-LayerOrder -Profile nowhere } | Should -Throw
    }
}
